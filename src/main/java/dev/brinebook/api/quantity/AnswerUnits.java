// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Explanation;
import dev.brinebook.quantity.AreaUnit;
import dev.brinebook.quantity.BedCapacityUnit;
import dev.brinebook.quantity.BedFlowUnit;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.ConcentrationUnit;
import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.LengthUnit;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.PressureUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.quantity.SaltEfficiencyUnit;
import dev.brinebook.quantity.SaltPerVolumeUnit;
import dev.brinebook.quantity.SurfaceFlowUnit;
import dev.brinebook.quantity.TemperatureUnit;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.quantity.WaterPerCapacityUnit;
import dev.brinebook.text.Localizable;
import dev.brinebook.text.Message;

/** The units that an answer is written in. Every number of an answer is rounded here, once. */
public enum AnswerUnits {
    US(HardnessUnit.GPG, VolumeUnit.US_GALLON, VolumeUnit.CUBIC_FOOT, FlowUnit.GPM, MassUnit.POUND,
            SaltDoseUnit.POUND_PER_CUBIC_FOOT, CapacityUnit.GRAIN, PressureUnit.PSI, TemperatureUnit.FAHRENHEIT,
            LengthUnit.INCH, AreaUnit.SQUARE_FOOT, SaltEfficiencyUnit.GRAIN_PER_POUND,
            WaterPerCapacityUnit.GALLON_PER_KILOGRAIN, SurfaceFlowUnit.GPM_PER_SQUARE_FOOT, BedFlowUnit.GPM_PER_CUBIC_FOOT,
            BedCapacityUnit.KILOGRAIN_PER_CUBIC_FOOT, SaltPerVolumeUnit.POUND_PER_US_GALLON),
    METRIC(HardnessUnit.MG_PER_L, VolumeUnit.LITRE, VolumeUnit.LITRE, FlowUnit.LITRE_PER_MINUTE, MassUnit.KILOGRAM,
            SaltDoseUnit.GRAM_PER_LITRE, CapacityUnit.GRAM, PressureUnit.KILOPASCAL, TemperatureUnit.CELSIUS,
            LengthUnit.METRE, AreaUnit.SQUARE_METRE, SaltEfficiencyUnit.GRAM_PER_GRAM,
            WaterPerCapacityUnit.LITRE_PER_KILOGRAM, SurfaceFlowUnit.METRE_PER_HOUR, BedFlowUnit.BED_VOLUMES_PER_HOUR,
            BedCapacityUnit.GRAM_PER_LITRE, SaltPerVolumeUnit.KILOGRAM_PER_LITRE);

    private final HardnessUnit hardness;
    private final VolumeUnit volume;
    private final VolumeUnit resinVolume;
    private final FlowUnit flow;
    private final MassUnit mass;
    private final SaltDoseUnit saltDose;
    private final CapacityUnit capacity;
    private final PressureUnit pressure;
    private final TemperatureUnit temperature;
    private final LengthUnit length;
    private final AreaUnit area;
    private final SaltEfficiencyUnit saltEfficiency;
    private final WaterPerCapacityUnit waterPerCapacity;
    private final SurfaceFlowUnit surfaceFlow;
    private final BedFlowUnit bedFlow;
    private final BedCapacityUnit bedCapacity;
    private final SaltPerVolumeUnit saltPerVolume;

    AnswerUnits(HardnessUnit hardness, VolumeUnit volume, VolumeUnit resinVolume, FlowUnit flow, MassUnit mass,
            SaltDoseUnit saltDose, CapacityUnit capacity, PressureUnit pressure, TemperatureUnit temperature,
            LengthUnit length, AreaUnit area, SaltEfficiencyUnit saltEfficiency, WaterPerCapacityUnit waterPerCapacity,
            SurfaceFlowUnit surfaceFlow, BedFlowUnit bedFlow, BedCapacityUnit bedCapacity, SaltPerVolumeUnit saltPerVolume) {
        this.hardness = hardness;
        this.volume = volume;
        this.resinVolume = resinVolume;
        this.flow = flow;
        this.mass = mass;
        this.saltDose = saltDose;
        this.capacity = capacity;
        this.pressure = pressure;
        this.temperature = temperature;
        this.length = length;
        this.area = area;
        this.saltEfficiency = saltEfficiency;
        this.waterPerCapacity = waterPerCapacity;
        this.surfaceFlow = surfaceFlow;
        this.bedFlow = bedFlow;
        this.bedCapacity = bedCapacity;
        this.saltPerVolume = saltPerVolume;
    }

    /** The units asked for, US when none are. */
    public static AnswerUnits orDefault(AnswerUnits asked) {
        return asked == null ? US : asked;
    }

    /** Those that an explanation is in. */
    public static AnswerUnits of(Explanation explanation) {
        return explanation.isMetric() ? METRIC : US;
    }

    /** An explanation that says everything in these units. */
    public Explanation explanation() {
        return new Explanation(this::saying, this == METRIC);
    }

    /** The text of {@code localizable}, in these units. */
    public Message saying(Localizable localizable) {
        return Message.of(localizable).inMetricUnits(this == METRIC);
    }

    public HardnessQuantity hardness(double mgPerL) {
        return new HardnessQuantity(Rounding.answer(hardness.fromBase(mgPerL)), hardness);
    }

    /** Concentrations are in mg/L in both systems, as laboratories print them. */
    public ConcentrationQuantity concentration(double mgPerL) {
        return new ConcentrationQuantity(Rounding.answer(mgPerL), ConcentrationUnit.MG_PER_L);
    }

    public VolumeQuantity volume(double litres) {
        return new VolumeQuantity(Rounding.answer(volume.fromBase(litres)), volume);
    }

    /** Resin is counted in cubic feet by the US trade, in litres elsewhere. */
    public VolumeQuantity resinVolume(double litres) {
        return new VolumeQuantity(Rounding.answer(resinVolume.fromBase(litres)), resinVolume);
    }

    public FlowQuantity flow(double litresPerMinute) {
        return new FlowQuantity(Rounding.answer(flow.fromBase(litresPerMinute)), flow);
    }

    public MassQuantity mass(double kilograms) {
        return new MassQuantity(Rounding.answer(mass.fromBase(kilograms)), mass);
    }

    public SaltDoseQuantity saltDose(double gramsPerLitre) {
        return new SaltDoseQuantity(Rounding.answer(saltDose.fromBase(gramsPerLitre)), saltDose);
    }

    public SaltPerVolumeQuantity saltPerVolume(double kilogramsPerLitre) {
        return new SaltPerVolumeQuantity(Rounding.answer(saltPerVolume.fromBase(kilogramsPerLitre)), saltPerVolume);
    }

    public CapacityQuantity capacity(double grams) {
        return new CapacityQuantity(Rounding.answer(capacity.fromBase(grams)), capacity);
    }

    public PressureQuantity pressure(double kilopascals) {
        return new PressureQuantity(Rounding.answer(pressure.fromBase(kilopascals)), pressure);
    }

    public TemperatureQuantity temperature(double celsius) {
        return new TemperatureQuantity(Rounding.answer(temperature.fromBase(celsius)), temperature);
    }

    public LengthQuantity length(double metres) {
        return new LengthQuantity(Rounding.answer(length.fromBase(metres)), length);
    }

    public AreaQuantity area(double squareMetres) {
        return new AreaQuantity(Rounding.answer(area.fromBase(squareMetres)), area);
    }

    public SaltEfficiencyQuantity saltEfficiency(double gramsPerGram) {
        return new SaltEfficiencyQuantity(Rounding.answer(saltEfficiency.fromBase(gramsPerGram)), saltEfficiency);
    }

    public WaterPerCapacityQuantity waterPerCapacity(double litresPerKilogram) {
        return new WaterPerCapacityQuantity(Rounding.answer(waterPerCapacity.fromBase(litresPerKilogram)),
                waterPerCapacity);
    }

    public SurfaceFlowQuantity surfaceFlow(double metresPerHour) {
        return new SurfaceFlowQuantity(Rounding.answer(surfaceFlow.fromBase(metresPerHour)), surfaceFlow);
    }

    public BedFlowQuantity bedFlow(double bedVolumesPerHour) {
        return new BedFlowQuantity(Rounding.answer(bedFlow.fromBase(bedVolumesPerHour)), bedFlow);
    }

    public BedCapacityQuantity bedCapacity(double gramsPerLitre) {
        return new BedCapacityQuantity(Rounding.answer(bedCapacity.fromBase(gramsPerLitre)), bedCapacity);
    }
}
