/** What each piece of equipment comes to: figures that do not belong to one set of open inlets, each with its derivation. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.sheet;
