package dapple.api;

import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.SpectrumEvaluation;
import dapple.light.spectrum.SpectrumSummary;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.site.ReferenceSpectra;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;

/** Spectra over HTTP: one in, what it does out. */
@Controller
@Allowed(Action.USE_ENGINE)
class SpectraController {
    private final SpectrumEvaluation evaluation = new SpectrumEvaluation(ReferenceSpectra.tables());
    private final Engine engine;

    SpectraController(Engine engine) {
        this.engine = engine;
    }

    @PostMapping("/api/v1/spectra")
    void spectra(HttpServletRequest request, HttpServletResponse response) throws IOException {
        Part document = BodyReader.read(request);
        SpectrumSummary summary = engine.run(run -> judged(document, run));
        response.setContentType(MediaType.APPLICATION_JSON_VALUE);
        SpectrumWriter.write(summary, response.getOutputStream());
    }

    private SpectrumSummary judged(Part document, Engine.Run run) {
        Spectrum spectrum = SpectrumReader.read(document);
        run.deadline().check();
        return evaluation.of(spectrum);
    }
}
