package dapple.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import dapple.light.survey.Crew;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JobTest {
    private static final Proposed RESULT = new Proposed.Not("said");

    private final Crew crew = Crew.ofOne(() -> {});
    private final Job job = new Job(3);

    @Test
    void keepsWhatWasFound() {
        job.run(crew, (hands, progress) -> RESULT);
        assertThat(job.standing().found()).contains(RESULT);
        assertThat(job.standing().state()).isEqualTo(Job.State.DONE);
    }

    @Test
    void whatIsToldOfOneMomentAgrees() {
        List<Job.Standing> told = new ArrayList<>();
        job.run(crew, (hands, progress) -> {
            told.add(job.standing());
            return RESULT;
        });
        told.add(job.standing());
        assertThat(told)
                .extracting(Job.Standing::isUnderWay, Job.Standing::found)
                .containsExactly(tuple(true, Optional.empty()), tuple(false, Optional.of(RESULT)));
    }

    @Test
    void neverGoesBack() {
        job.run(crew, (hands, progress) -> {
            progress.accept(0.7);
            progress.accept(0.4);
            return RESULT;
        });
        assertThat(job.standing().share()).isEqualTo(0.7);
    }

    @Test
    void doesNotBeginOnceItIsStopped() {
        job.stop();
        job.run(crew, (hands, progress) -> {
            throw new AssertionError("was begun");
        });
        assertThat(job.standing().state()).isEqualTo(Job.State.STOPPED);
    }

    @Test
    void stopsBetweenTwoPlaces() {
        int[] seen = {0};
        job.run(crew, (hands, progress) -> {
            hands.each(10, () -> seen, (count, index) -> {
                count[0]++;
                if (index == 2) {
                    job.stop();
                }
            });
            return RESULT;
        });
        assertThat(seen[0]).isEqualTo(3);
        assertThat(job.standing().state()).isEqualTo(Job.State.STOPPED);
        assertThat(job.standing().found()).isEmpty();
    }

    @Test
    void saysThatItFailed() {
        assertThatThrownBy(() -> job.run(crew, (hands, progress) -> {
                    throw new IllegalStateException("broken");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(job.standing().state()).isEqualTo(Job.State.FAILED);
    }
}
