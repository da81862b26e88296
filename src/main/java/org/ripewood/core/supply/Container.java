package org.ripewood.core.supply;

/**
 * A container as it is planted: its inside, the lip left free at the rim for watering, and the top
 * dressing under it.
 *
 * @param lipMm left free at the rim
 * @param dressingMm thickness of the top dressing
 */
public record Container(ContainerShape shape, double lipMm, double dressingMm) {

    /**
     * @throws IllegalArgumentException when nothing is left for substrate under lip and dressing
     */
    public Container {
        if (!(lipMm >= 0 && dressingMm >= 0 && lipMm + dressingMm < shape.depthMm())) {
            throw new IllegalArgumentException(
                    "a lip of %s mm and a dressing of %s mm leave nothing of a depth of %s mm"
                            .formatted(lipMm, dressingMm, shape.depthMm()));
        }
    }

    /** How deep substrate and roots may be, mm. */
    public double rootDepthMm() {
        return shape.depthMm() - lipMm - dressingMm;
    }

    /** Everything up to the rim, litres. */
    public double brimLitres() {
        return shape.litres(shape.depthMm());
    }

    /** Substrate and roots up to the dressing, litres. */
    public double substrateLitres() {
        return shape.litres(rootDepthMm());
    }

    /** Top dressing, litres. */
    public double dressingLitres() {
        return shape.litres(shape.depthMm() - lipMm) - substrateLitres();
    }

    /**
     * Substrate around a root ball, litres; 0 when the ball is larger than what there is room for.
     */
    public double litresAround(RootBall ball) {
        return Math.max(0, substrateLitres() - ball.litres());
    }

    /** Area at the rim, cm². */
    public double topAreaCm2() {
        return shape.top().areaMm2() / 100;
    }
}
