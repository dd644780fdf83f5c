/** The dust's way over time: receiver hold-up, rotary valve, container, changes. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.discharge;
