package dapple.species;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.site.SourceMark;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LibraryTest {
    private final Library library = new Library();

    /** As {@code shared/SOURCES.md} says: two rows rest on an abstract [edmonds2018], all others on memory. */
    @Test
    void isFromMemoryButForTwoRows() {
        Map<SourceMark, Long> counts =
                library.search("").stream().collect(Collectors.groupingBy(Taxon::mark, Collectors.counting()));
        assertThat(counts).isEqualTo(Map.of(SourceMark.FROM_MEMORY, 232L, SourceMark.PUBLISHED_SECONDARY, 2L));
    }

    /** Counted by hand in the table of the trade's facts. */
    @ParameterizedTest
    @CsvSource({"lizard, 123", "rhynchocephalian, 1", "snake, 40", "chelonian, 39", "crocodilian, 10", "amphibian, 21"})
    void hasTaxaOfEachGroup(String group, int taxa) {
        assertThat(library.search("").stream().filter(taxon -> taxon.group().equals(group)))
                .hasSize(taxa);
    }

    /** Edmonds et al. 2018: zone 1, median UV index 0.3; read in the abstract. */
    @ParameterizedTest
    @ValueSource(strings = {"Calumma brevicorne", "Calumma nasutum"})
    void knowsThePublishedZones(String name) {
        assertThat(library.find(name).orElseThrow().zone()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "vitticeps, Pogona vitticeps",
        "CENTRAL BEARDED, Pogona vitticeps",
        "Laudakia, Stellagama stellio",
        "' thorny devil ', Moloch horridus"
    })
    void isSearchedByScientificNameSynonymAndCommonName(String typed, String found) {
        assertThat(library.search(typed))
                .extracting(taxon -> taxon.name().scientific())
                .containsExactly(found);
    }

    @Test
    void isInOrderOfScientificNames() {
        assertThat(library.search(""))
                .extracting(taxon -> taxon.name().scientific())
                .isSorted();
    }

    @Test
    void findsNothingForANameThatNoRowHas() {
        assertThat(library.search("unicorn")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"pogona vitticeps, Pogona vitticeps", "Laudakia stellio, Stellagama stellio"})
    void findsARowByNameOrSynonym(String typed, String found) {
        assertThat(library.find(typed).orElseThrow().name().scientific()).isEqualTo(found);
    }

    @ParameterizedTest
    @CsvSource({
        "Pogona viticeps, Pogona vitticeps",
        "Laudakia stelio, Stellagama stellio",
        "Laudakia stellio, Stellagama stellio",
        "Thorny devil, Moloch horridus"
    })
    void offersWhatIsNear(String typed, String meant) {
        assertThat(library.near(typed).get(0).name().scientific()).isEqualTo(meant);
    }

    @Test
    void offersNothingNearAnExactName() {
        assertThat(library.near("Pogona vitticeps")).isEmpty();
    }

    @Test
    void offersNothingNearAStrangeName() {
        assertThat(library.near("Equus caballus")).isEmpty();
    }

    @Test
    void suggestsTheZoneBeforeTheAlternative() {
        assertThat(suggestions("Pogona vitticeps"))
                .containsExactly(new UvZone(3, LightMethod.SUNBEAM), new UvZone(4, LightMethod.SUNBEAM));
    }

    @Test
    void suggestsOnlyMethodsThatAreUsualInTheZone() {
        assertThat(suggestions("Physignathus cocincinus"))
                .containsExactly(
                        new UvZone(2, LightMethod.SHADE),
                        new UvZone(2, LightMethod.SUNBEAM),
                        new UvZone(3, LightMethod.SUNBEAM));
    }

    @Test
    void suggestsAUsualZoneForEveryTaxon() {
        assertThat(library.search(""))
                .allSatisfy(taxon -> assertThat(taxon.suggestions())
                        .isNotEmpty()
                        .allMatch(UvZone::isUsual)
                        .first()
                        .matches(first -> first.number() == taxon.zone()));
    }

    private List<UvZone> suggestions(String name) {
        return library.find(name).orElseThrow().suggestions();
    }
}
