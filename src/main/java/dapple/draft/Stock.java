package dapple.draft;

import dapple.lamp.LampFacts;
import dapple.lamp.LampModelFacts;
import dapple.lamp.Lamps;
import dapple.site.NotFoundException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The lamps that a site has, in use or not, and the models that it could buy, by id. */
public record Stock(Map<Long, LampFacts> lamps, Map<Long, LampModelFacts> models) {
    public Stock {
        lamps = Map.copyOf(lamps);
        models = Map.copyOf(models);
    }

    static Stock of(Lamps lamps, long siteId) {
        Map<Long, LampModelFacts> models =
                lamps.models(siteId).stream().collect(Collectors.toMap(LampModelFacts::id, Function.identity()));
        return new Stock(lamps.byId(siteId, models), models);
    }

    public boolean has(LampPick pick) {
        return pick instanceof LampPick.Stock stock
                ? lamps.containsKey(stock.lampId())
                : models.containsKey(((LampPick.Model) pick).modelId());
    }

    /**
     * The lamp that is meant; one to be bought is given what its model states.
     *
     * @param number of the lamp in its draft, from 0: what is to be bought is named and told apart by it
     */
    LampFacts lamp(LampPick pick, int number) {
        if (pick instanceof LampPick.Stock stock) {
            return Optional.ofNullable(lamps.get(stock.lampId())).orElseThrow(NotFoundException::new);
        }
        LampModelFacts model = Optional.ofNullable(models.get(((LampPick.Model) pick).modelId()))
                .orElseThrow(NotFoundException::new);
        return new LampFacts(
                -1L - number, tag(number), model, Optional.of(0.0), Optional.empty(), List.of(), Optional.empty());
    }

    private String tag(int number) {
        String tag = "new " + (number + 1);
        return lamps.values().stream().anyMatch(lamp -> lamp.tag().equals(tag)) ? tag + "*" : tag;
    }
}
