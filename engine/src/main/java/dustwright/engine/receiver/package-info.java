/** Separation, filter and its cleaning. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.receiver;
