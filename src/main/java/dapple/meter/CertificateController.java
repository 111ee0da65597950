package dapple.meter;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.TakenException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** The certificate of a calibration as a file: kept here, and handed out to be saved, never shown by the site. */
@Controller
@RequestMapping("/meters/{meterId}/calibrations/{calibrationId}")
class CertificateController {
    private final MeterRegister meters;
    private final Calibrations calibrations;
    private final Certificates certificates;

    CertificateController(MeterRegister meters, Calibrations calibrations, Certificates certificates) {
        this.meters = meters;
        this.calibrations = calibrations;
        this.certificates = certificates;
    }

    @GetMapping("/file/new")
    @Allowed(Action.KEEP_METERS)
    String choose(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long meterId,
            @PathVariable long calibrationId,
            Model model) {
        return asking(me, meterId, calibrationId, null, model);
    }

    @PostMapping("/file/new")
    @Allowed(Action.KEEP_METERS)
    String keep(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long meterId,
            @PathVariable long calibrationId,
            @RequestParam Optional<MultipartFile> file,
            Model model) {
        byte[] content = file.map(CertificateController::content).orElse(new byte[0]);
        if (content.length > Certificates.MOST_BYTES) {
            return asking(me, meterId, calibrationId, "certificate.file.large", model);
        }
        String name = file.map(MultipartFile::getOriginalFilename).orElse("");
        Optional<Filed> filed = Filed.of(name, content, me.personId());
        if (filed.isEmpty()) {
            return asking(me, meterId, calibrationId, "certificate.file.kind", model);
        }
        try {
            certificates.keep(me.siteId(), meterId, calibrationId, filed.get());
            return "redirect:/meters/" + meterId;
        } catch (TakenException taken) {
            return asking(me, meterId, calibrationId, "certificate.file.taken", model);
        }
    }

    @GetMapping("/file")
    @Allowed(Action.SEE_STOCK)
    ResponseEntity<byte[]> handOut(
            @AuthenticationPrincipal SignedIn me, @PathVariable long meterId, @PathVariable long calibrationId) {
        Certificates.Kept kept = certificates.get(me.siteId(), meterId, calibrationId);
        ContentDisposition attachment = ContentDisposition.attachment()
                .filename(kept.facts().name(), StandardCharsets.UTF_8)
                .build();
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(kept.facts().kind().mediaType()))
                .header(HttpHeaders.CONTENT_DISPOSITION, attachment.toString())
                .header("X-Content-Type-Options", "nosniff")
                .header("Cross-Origin-Resource-Policy", "same-site")
                .body(kept.content().toByteArray());
    }

    private String asking(SignedIn me, long meterId, long calibrationId, @Nullable String wrong, Model model) {
        model.addAttribute("meter", meters.get(me.siteId(), meterId));
        model.addAttribute("calibration", calibrations.get(me.siteId(), meterId, calibrationId));
        model.addAttribute("wrong", wrong);
        return "meter/certificate";
    }

    private static byte[] content(MultipartFile file) {
        try {
            return file.getBytes();
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot read an uploaded file", cause);
        }
    }
}
