/** Tube, bend, wye, hose, inlet, tool; the loss of one piece. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.tubing;
