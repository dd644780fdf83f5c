/** The control sequence: its model, one scan of it, every state it can reach, and what is proven about them. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.interlock;
