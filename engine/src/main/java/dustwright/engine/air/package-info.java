/** Moist air as an ideal gas, its viscosity, saturation pressure and the standard atmosphere. */
@org.jspecify.annotations.NullMarked
package dustwright.engine.air;
