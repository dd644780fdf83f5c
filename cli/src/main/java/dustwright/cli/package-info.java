/** The commands for terminals and scripts: read a plant file, ask the engine, print what it found. */
@org.jspecify.annotations.NullMarked
package dustwright.cli;
