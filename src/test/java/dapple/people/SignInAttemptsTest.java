package dapple.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SignInAttemptsTest {
    private final SignInAttempts attempts = new SignInAttempts();

    @Test
    void allowsTenWrongPasswordsForAName() {
        for (int attempt = 1; attempt <= 10; attempt++) {
            assertThat(attempts.mayTry("tamsin", "10.0.0." + attempt)).isTrue();
        }
        assertThat(attempts.mayTry("tamsin", "10.0.0.99")).isFalse();
    }

    @Test
    void takesANameForTheSameInAnyCase() {
        for (int attempt = 1; attempt <= 10; attempt++) {
            attempts.mayTry("tamsin", "10.0.0." + attempt);
        }
        assertThat(attempts.mayTry(" TAMSIN", "10.0.0.99")).isFalse();
    }

    @Test
    void allowsFiftyNamesFromAnAddress() {
        for (int attempt = 1; attempt <= 50; attempt++) {
            assertThat(attempts.mayTry("name" + attempt, "10.0.0.1")).isTrue();
        }
        assertThat(attempts.mayTry("another", "10.0.0.1")).isFalse();
    }

    @Test
    void countsNoSuccessAgainstAnybody() {
        for (int attempt = 1; attempt <= 100; attempt++) {
            assertThat(attempts.mayTry("tamsin", "10.0.0.1")).isTrue();
            attempts.succeeded("tamsin", "10.0.0.1");
        }
    }
}
