/** Re-checks balances and leg laws from the result, sharing no solver code. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.audit;
