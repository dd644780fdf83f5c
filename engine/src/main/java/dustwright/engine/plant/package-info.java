/** The whole plant as one value. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.plant;
