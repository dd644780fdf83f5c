/** Energy, compressed air, labour and life-cycle cost. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.cost;
