package org.ripewood.web.stock;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.Coupling;
import org.ripewood.core.supply.Outline;
import org.ripewood.core.supply.WireMetal;

/** What the calculators are asked. */
final class CalculatorInput {

    private CalculatorInput() {}

    record OfContainer(
            @NotNull Outline outline,
            @NotNull @DecimalMin("0.1") @DecimalMax("3000") Double topLengthMm,
            @Nullable @DecimalMin("0.1") @DecimalMax("3000") Double topWidthMm,
            @Nullable @DecimalMin("0.1") @DecimalMax("3000") Double bottomLengthMm,
            @Nullable @DecimalMin("0.1") @DecimalMax("3000") Double bottomWidthMm,
            @NotNull @DecimalMin("0.1") @DecimalMax("3000") Double depthMm,
            @Nullable @DecimalMin("0") @DecimalMax("3000") Double lipMm,
            @Nullable @DecimalMin("0") @DecimalMax("3000") Double dressingMm) {}

    record OfMix(
            @NotBlank @Size(max = 120) String mix,
            @NotNull @DecimalMin("0.01") @DecimalMax("10000") Double litres,
            @Nullable @DecimalMin("0") @DecimalMax("50") Double settlingPercent) {}

    record OfNext(
            @NotNull Outline outline,
            @NotNull @DecimalMin("5") @DecimalMax("3000") Double lengthMm,
            @Nullable @DecimalMin("5") @DecimalMax("3000") Double widthMm,
            @NotNull @DecimalMin("5") @DecimalMax("3000") Double depthMm,
            @Nullable @DecimalMin("1") @DecimalMax("3000") Double trunkBaseMm,
            @Nullable @DecimalMin("1") @DecimalMax("10000") Double heightMm,
            @Nullable @DecimalMin("1") @DecimalMax("10000") Double spreadMm,
            @Nullable @DecimalMin("5") @DecimalMax("3000") Double wantedDepthMm,
            @Nullable @DecimalMin("5") @DecimalMax("3000") Double presentDepthMm) {}

    record OfWire(
            @NotNull WireMetal metal,
            @NotNull @DecimalMin("5") @DecimalMax("10000") Double branchMm,
            @NotNull @DecimalMin("0.5") @DecimalMax("500") Double acrossMm) {}

    record OfFeed(
            @NotNull @DecimalMin("0") @DecimalMax("100") Double percentN,
            @Nullable @DecimalMin("0") @DecimalMax("100") Double percentP2o5,
            @Nullable @DecimalMin("0") @DecimalMax("100") Double percentK2o,
            @Nullable @DecimalMin("0") @DecimalMax("2000") Double mgNPerLitre,
            @Nullable @DecimalMin("0.1") @DecimalMax("100000") Double waterLitres,
            @Nullable @DecimalMin("0.01") @DecimalMax("5000") Double containerLitres,
            @Nullable @DecimalMin("0") @DecimalMax("18") Double months) {}

    record OfLift(
            @Nullable @DecimalMin("0.1") @DecimalMax("1000") Double kg,
            @Nullable @Size(max = 120) String mix,
            @Nullable @DecimalMin("0.01") @DecimalMax("10000") Double litres,
            @Nullable @DecimalMin("0") @DecimalMax("1000") Double containerKg,
            @Nullable @DecimalMin("0") @DecimalMax("1000") Double treeKg,
            @NotNull @DecimalMin("0") @DecimalMax("200") Double horizontalCm,
            @NotNull @DecimalMin("0") @DecimalMax("300") Double verticalCm,
            @NotNull @DecimalMin("0") @DecimalMax("300") Double travelCm,
            @Nullable @DecimalMin("0") @DecimalMax("180") Double asymmetryDegrees,
            @NotNull Coupling coupling) {}
}
