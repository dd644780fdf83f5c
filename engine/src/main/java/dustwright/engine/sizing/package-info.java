/** Choice of sizes, provably cheapest among those for which full coverage is shown. */
@NullMarked
package dustwright.engine.sizing;

import org.jspecify.annotations.NullMarked;
