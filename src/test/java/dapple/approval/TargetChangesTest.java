package dapple.approval;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.target.Approval;
import dapple.target.LimitPlace;
import dapple.target.Photoperiod;
import dapple.target.SourcedLimit;
import dapple.target.Target;
import dapple.target.VersionDetails;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TargetChangesTest {
    private static final UvZone ZONE = new UvZone(3, LightMethod.SUNBEAM);

    @Test
    void areNothingWhenEverythingIsTheSame() {
        assertThat(changes(cells(2.9, 7.4, 0.29, 8), cells(2.9, 7.4, 0.29, 8)).isNothing())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "2.9, 7.4, 0.29, 8, false",
        "3.0, 7.4, 0.29, 8, true",
        "2.9, 7.5, 0.29, 8, true",
        "2.9, 7.4, 0.3, 8, true",
        "2.9, 7.4, 0.29, 8.5, true",
        "1.0, 7.0, 0.1, 7.5, false"
    })
    void raiseUltravioletWhenAnyCellGoesUp(double low, double high, double shade, double ceiling, boolean raised) {
        assertThat(changes(cells(2.9, 7.4, 0.29, 8), cells(low, high, shade, ceiling))
                        .raisesUltraviolet())
                .isEqualTo(raised);
    }

    @Test
    void raiseUltravioletWithAFirstTarget() {
        assertThat(TargetChanges.between(Optional.empty(), approval(ZONE, cells(0.7, 1, 0.1, 3), Optional.empty()))
                        .raisesUltraviolet())
                .isTrue();
    }

    @Test
    void doNotRaiseUltravioletWithMoreIlluminance() {
        List<SourcedLimit> more = new ArrayList<>(cells(2.9, 7.4, 0.29, 8));
        more.add(limit(Quantity.ILLUMINANCE, LimitPlace.BASKING, new Band(5000, 50000)));
        assertThat(changes(cells(2.9, 7.4, 0.29, 8), more).raisesUltraviolet()).isFalse();
    }

    @Test
    void nameACellOnlyIfItDiffers() {
        assertThat(changes(cells(2.9, 7.4, 0.29, 8), cells(2.9, 7.4, 0.2, 8)).cells())
                .extracting(CellChange::place)
                .containsExactly(LimitPlace.SHADE);
    }

    @Test
    void tellOfAPhotoperiodThatIsNew() {
        Photoperiod half = new Photoperiod(Collections.nCopies(12, 12.0), SourceMark.COMMON_PRACTICE, "tropics");
        TargetChanges changes = TargetChanges.between(
                Optional.of(version(cells(2.9, 7.4, 0.29, 8))),
                approval(ZONE, cells(2.9, 7.4, 0.29, 8), Optional.of(half)));
        assertThat(changes.isOfPhotoperiod()).isTrue();
    }

    @Test
    void haveAnotherFingerprintWhenTheyDiffer() {
        List<SourcedLimit> before = cells(2.9, 7.4, 0.29, 8);
        assertThat(changes(before, cells(2.9, 7.4, 0.2, 8)).fingerprint())
                .isNotEqualTo(changes(before, cells(2.9, 7.4, 0.3, 8)).fingerprint());
    }

    private static TargetChanges changes(List<SourcedLimit> before, List<SourcedLimit> after) {
        return TargetChanges.between(Optional.of(version(before)), approval(ZONE, after, Optional.empty()));
    }

    private static VersionDetails version(List<SourcedLimit> limits) {
        return new VersionDetails(
                new Target(1, 1, 1, ZONE, Instant.EPOCH, Instant.EPOCH, limits), Optional.empty(), 1, "for a test");
    }

    private static Approval approval(UvZone zone, List<SourcedLimit> limits, Optional<Photoperiod> photoperiod) {
        return new Approval(1, zone, limits, photoperiod, 1, "for a test");
    }

    private static List<SourcedLimit> cells(double low, double high, double shade, double ceiling) {
        return List.of(
                limit(Quantity.UV_INDEX, LimitPlace.BASKING, new Band(low, high)),
                limit(Quantity.UV_INDEX, LimitPlace.SHADE, Band.atMost(shade)),
                limit(Quantity.UV_INDEX, LimitPlace.CEILING, Band.atMost(ceiling)));
    }

    private static SourcedLimit limit(Quantity quantity, LimitPlace place, Band band) {
        return new SourcedLimit(quantity, place, band, SourceMark.FROM_MEMORY, "for a test");
    }
}
