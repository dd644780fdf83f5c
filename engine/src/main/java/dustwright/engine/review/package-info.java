/** The hazard study: what could go wrong at each part of the plant as it is drawn and controlled, what guards against it, what is missing. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.review;
