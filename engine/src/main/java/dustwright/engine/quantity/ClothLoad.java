package dustwright.engine.quantity;

/** Mass over area: dust on cloth, a panel [kg/m²]. */
public record ClothLoad(double kgPerSquareMetre) implements Quantity, Comparable<ClothLoad> {
    public ClothLoad {
        Finite.atLeastZero("ClothLoad", kgPerSquareMetre);
    }

    @Override
    public double si() {
        return kgPerSquareMetre;
    }

    @Override
    public Dimension dimension() {
        return Dimension.CLOTH_LOAD;
    }

    @Override
    public int compareTo(ClothLoad other) {
        return Double.compare(kgPerSquareMetre, other.kgPerSquareMetre);
    }
}
