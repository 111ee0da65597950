package dapple.api;

import dapple.people.Action;
import dapple.people.Allowed;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;

/** The engine over HTTP: a scene in, its light out. */
@Controller
@Allowed(Action.USE_ENGINE)
class LightFieldController {
    private final Engine engine;

    LightFieldController(Engine engine) {
        this.engine = engine;
    }

    @PostMapping("/api/v1/light-field")
    void lightField(HttpServletRequest request, HttpServletResponse response) throws IOException {
        Part document = BodyReader.read(request);
        Answer answer = engine.run(run -> LightField.of(SceneReader.read(document, run.deadline()), run));
        response.setContentType(MediaType.APPLICATION_JSON_VALUE);
        AnswerWriter.write(answer, response.getOutputStream());
    }
}
