/** Sound of vacuum producers: levels, distance, silencer, exposure. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.noise;
