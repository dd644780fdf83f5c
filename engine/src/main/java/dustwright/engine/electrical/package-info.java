/** Motors, their circuits, the panel and its signals: screening by published tables, never a wiring design. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.electrical;
