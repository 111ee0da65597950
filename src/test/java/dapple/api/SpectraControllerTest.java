package dapple.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

class SpectraControllerTest {
    private final Engine hasty = new Engine(Duration.ZERO);
    private final SpectraController controller = new SpectraController(hasty);

    @AfterEach
    void close() {
        hasty.close();
    }

    @Test
    void givesUpAtTheDeadlineAndTakesTheNext() {
        for (int request = 0; request <= Runtime.getRuntime().availableProcessors(); request++) {
            MockHttpServletResponse response = new MockHttpServletResponse();
            RefusedException refused =
                    catchThrowableOfType(RefusedException.class, () -> controller.spectra(request(), response));
            assertThat(refused.problem().status()).isEqualTo(503);
            assertThat(refused.problem().title()).isEqualTo("Too long for one request");
            assertThat(response.getContentAsByteArray()).isEmpty();
        }
    }

    private static MockHttpServletRequest request() {
        MockHttpServletRequest request = new MockHttpServletRequest("POST", "/api/v1/spectra");
        request.setContentType(MediaType.APPLICATION_JSON_VALUE);
        request.setContent("{\"version\":1,\"samples\":[]}".getBytes(StandardCharsets.UTF_8));
        return request;
    }
}
