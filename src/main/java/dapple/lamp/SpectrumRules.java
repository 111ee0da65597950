package dapple.lamp;

import dapple.lamp.SpectrumText.Outcome;
import org.springframework.validation.Errors;

/** Says beside the field what is wrong with the text of a spectrum. */
final class SpectrumRules {
    private SpectrumRules() {}

    static Outcome check(String content, Errors errors) {
        if (content.isBlank()) {
            errors.rejectValue("content", "lamp-model.spectrum.needed");
            return new Outcome.Refused(0, "");
        }
        if (content.length() > FiledSpectrum.MOST_CHARACTERS) {
            errors.rejectValue("content", "lamp-model.spectrum.long");
            return new Outcome.Refused(0, "");
        }
        Outcome outcome = SpectrumText.read(content);
        if (outcome instanceof Outcome.Refused refused) {
            Object[] said = {String.valueOf(refused.line()), refused.reason()};
            String code = refused.line() > 0 ? "lamp-model.spectrum.line" : "lamp-model.spectrum.whole";
            errors.rejectValue("content", code, said, null);
        }
        return outcome;
    }
}
