package dapple.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.survey.Crew;
import org.junit.jupiter.api.Test;

class JobTest {
    private static final Proposed RESULT = new Proposed.Not("said");

    private final Crew crew = Crew.ofOne(() -> {});
    private final Job job = new Job(3);

    @Test
    void keepsWhatWasFound() {
        job.run(crew, (hands, progress) -> RESULT);
        assertThat(job.found()).contains(RESULT);
        assertThat(job.state()).isEqualTo(Job.State.DONE);
    }

    @Test
    void neverGoesBack() {
        job.run(crew, (hands, progress) -> {
            progress.accept(0.7);
            progress.accept(0.4);
            return RESULT;
        });
        assertThat(job.share()).isEqualTo(0.7);
    }

    @Test
    void doesNotBeginOnceItIsStopped() {
        job.stop();
        job.run(crew, (hands, progress) -> {
            throw new AssertionError("was begun");
        });
        assertThat(job.state()).isEqualTo(Job.State.STOPPED);
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
        assertThat(job.state()).isEqualTo(Job.State.STOPPED);
        assertThat(job.found()).isEmpty();
    }

    @Test
    void saysThatItFailed() {
        assertThatThrownBy(() -> job.run(crew, (hands, progress) -> {
                    throw new IllegalStateException("broken");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(job.state()).isEqualTo(Job.State.FAILED);
    }
}
