package dapple.lamp;

import dapple.light.photometry.Lm63;
import dapple.light.photometry.PhotometricFile;
import dapple.light.quantity.Check;
import dapple.light.source.Beam;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.validation.Errors;

/** Makes a shape of a photometric file, or says beside the field what is wrong with it. */
final class PhotometryRules {
    private PhotometryRules() {}

    static Optional<LampShape.Measured> check(String content, Errors errors) {
        if (content.isBlank()) {
            errors.rejectValue("content", "lamp-model.photometry.needed");
            return Optional.empty();
        }
        if (content.length() > FiledPhotometry.MOST_CHARACTERS) {
            errors.rejectValue("content", "lamp-model.photometry.long");
            return Optional.empty();
        }
        Lm63.Outcome outcome = Lm63.read(content);
        if (outcome instanceof Lm63.Outcome.Refused refused) {
            refuse(refused, errors);
            return Optional.empty();
        }
        return shapeOrRefusal(((Lm63.Outcome.Read) outcome).file(), errors);
    }

    private static Optional<LampShape.Measured> shapeOrRefusal(PhotometricFile file, Errors errors) {
        Optional<LampShape.Measured> shape = shape(file);
        if (shape.isEmpty()) {
            errors.rejectValue("content", "lamp-model.photometry.no-beam");
        }
        return shape;
    }

    private static void refuse(Lm63.Outcome.Refused refused, Errors errors) {
        Object[] said = {String.valueOf(refused.line()), refused.reason()};
        String code = refused.line() > 0 ? "lamp-model.photometry.line" : "lamp-model.photometry.whole";
        errors.rejectValue("content", code, said, null);
    }

    /** Empty where nothing shines along the aim, so that there is no beam about it. */
    static Optional<LampShape.Measured> shape(PhotometricFile file) {
        return file.intensities().beam().map(beam -> new LampShape.Measured(rows(beam), radius(file.opening())));
    }

    /** Each whole degree to 90: a lamp of ours gives nothing behind. */
    private static List<Double> rows(Beam.Table beam) {
        return IntStream.rangeClosed(0, LampShape.Measured.DEGREES)
                .mapToObj(degree -> beam.towards(Math.cos(Math.toRadians(degree))))
                .map(PhotometryRules::rounded)
                .toList();
    }

    private static double rounded(double share) {
        return Math.rint(Check.within("relative intensity", share, 0, 1e6, "") * 1e6) / 1e6;
    }

    /** Of a disc; of a rectangle as if it were as large as round. */
    private static Optional<Double> radius(PhotometricFile.Opening opening) {
        return Optional.of(Math.sqrt(opening.widthMetres() * opening.lengthMetres()) / 2)
                .filter(metres -> metres >= LampShape.LEAST_METRES && metres <= LampShape.MOST_METRES);
    }
}
