/** The control sequence together with the station it controls: dust, levels, vacuum, current, air, people; deterministic, from event to event. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.rehearsal;
