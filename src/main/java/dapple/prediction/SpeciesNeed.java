package dapple.prediction;

import dapple.animal.AnimalFacts;
import dapple.light.judging.Limits;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.zone.ZoneTarget;
import dapple.order.OrderFacts;
import dapple.target.LightHours;
import dapple.target.Target;
import java.util.List;
import java.util.Optional;

/**
 * What a species that lives in an enclosure needs, or one of its animals by a vet's order.
 *
 * @param target in force; empty: none yet
 * @param order in force for one animal or group; empty: what those of the species need that are under none
 * @param light that its target asks for in this month; empty: it says nothing of that
 */
public record SpeciesNeed(
        long speciesId,
        String scientificName,
        Optional<Target> target,
        Optional<UnderOrder> order,
        Optional<LightHours> light) {
    /** Nothing is said of the length of the day. */
    public SpeciesNeed(long speciesId, String scientificName, Optional<Target> target, Optional<UnderOrder> order) {
        this(speciesId, scientificName, target, order, Optional.empty());
    }

    /** What is asked of a quantity: a vet's order speaks of the UV index alone. */
    public Optional<Limits> limits(Quantity quantity) {
        Optional<Limits> ofSpecies = target.flatMap(found -> found.limits(quantity));
        return quantity == Quantity.UV_INDEX && order.isPresent()
                ? order.map(under -> under.order().limits(ofSpecies))
                : ofSpecies;
    }

    /**
     * The limits of the zones by UV index. Where the limits of different places cross, the stricter one cuts the other off,
     * so that every amount lies in one zone. A basking range without lower end begins where shade ends.
     */
    public Optional<ZoneTarget> zones() {
        return limits(Quantity.UV_INDEX).map(SpeciesNeed::zones);
    }

    /**
     * The limits of the zones by a quantity. Of all but the UV index each place may be limited alone: empty without a
     * basking range, and where nothing is asked of shade only darkness is shade.
     */
    public Optional<ZoneTarget> zones(Quantity quantity) {
        return quantity == Quantity.UV_INDEX
                ? zones()
                : limits(quantity).filter(limits -> !limits.basking().isOpen()).map(SpeciesNeed::zonesAsFarAsAsked);
    }

    private static ZoneTarget zonesAsFarAsAsked(Limits limits) {
        return limits.shade().isOpen() ? zones(new Limits(limits.basking(), 0, limits.ceiling())) : zones(limits);
    }

    private static ZoneTarget zones(Limits limits) {
        double most = Math.min(limits.basking().high(), limits.ceiling());
        double low = limits.basking().low() > 0 ? limits.basking().low() : Math.min(limits.shadeHigh(), most);
        double high = Math.max(low, most);
        return new ZoneTarget(new Interval(low, high), Math.min(limits.shadeHigh(), low), limits.ceiling());
    }

    double ceiling() {
        return limits(Quantity.UV_INDEX).map(Limits::ceiling).orElse(Limits.NO_CEILING);
    }

    /** For whom: the species, or by its name the animal under an order. */
    String holder() {
        return order.map(under -> under.animal().name() + " (" + scientificName + ")")
                .orElse(scientificName);
    }

    /** The animal under an order; 0: none. */
    long animalId() {
        return order.map(under -> under.animal().id()).orElse(0L);
    }

    /** Those among animals whose need this is: an animal under an order has its own of all the needs. */
    List<AnimalFacts> holders(List<AnimalFacts> animals, List<SpeciesNeed> all) {
        return animals.stream()
                .filter(animal -> all.stream().anyMatch(need -> need.animalId() == animal.id())
                        ? animalId() == animal.id()
                        : order.isEmpty() && speciesId == animal.speciesId())
                .toList();
    }

    boolean isOf(Optional<Long> wantedSpecies, Optional<Long> wantedAnimal) {
        return wantedAnimal.isPresent()
                ? wantedAnimal.get() == animalId()
                : order.isEmpty() && wantedSpecies.filter(id -> id == speciesId).isPresent();
    }

    /** An animal or group with the vet's order that is in force for it. */
    public record UnderOrder(AnimalFacts animal, OrderFacts order) {}
}
