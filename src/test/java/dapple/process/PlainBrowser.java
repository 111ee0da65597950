package dapple.process;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** One person's cookies and forms, without a screen. Redirects are shown, and followed only by {@link #open}. */
final class PlainBrowser {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    private URI server;

    PlainBrowser(URI server) {
        this.server = server;
    }

    /** Goes on with the same cookies where the program is now. */
    void moveTo(URI other) {
        this.server = other;
    }

    Page get(String path) throws IOException, InterruptedException {
        return send(path, request(path).GET());
    }

    /** The page to which a path leads at last. */
    Page open(String path) throws IOException, InterruptedException {
        Page page = get(path);
        while (page.location().isPresent()) {
            page = get(page.location().get());
        }
        return page;
    }

    Page post(String path, Map<String, String> fields) throws IOException, InterruptedException {
        String body = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return send(
                path,
                request(path)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(body)));
    }

    /** A form with a file. */
    Page post(String path, Map<String, String> fields, Path file) throws IOException, InterruptedException {
        String boundary = "boundary" + System.nanoTime();
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (Map.Entry<String, String> field : fields.entrySet()) {
            body.writeBytes(("--" + boundary + "\r\nContent-Disposition: form-data; name=\"" + field.getKey()
                            + "\"\r\n\r\n" + field.getValue() + "\r\n")
                    .getBytes(StandardCharsets.UTF_8));
        }
        body.writeBytes(
                ("--" + boundary + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"sent.zip\"\r\n"
                                + "Content-Type: application/zip\r\n\r\n")
                        .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(Files.readAllBytes(file));
        body.writeBytes(("\r\n--" + boundary + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return send(
                path,
                request(path)
                        .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                        .POST(BodyPublishers.ofByteArray(body.toByteArray())));
    }

    /** Saves what is answered. */
    Path save(String path, Path to) throws IOException, InterruptedException {
        return client.send(request(path).GET().build(), BodyHandlers.ofFile(to)).body();
    }

    /** Where the form at the sign-in page leads. */
    Page signIn(String name, String password) throws IOException, InterruptedException {
        String csrf = get("/sign-in").field("_csrf");
        return post("/sign-in", Map.of("signInName", name, "password", password, "_csrf", csrf));
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(server.resolve(path)).timeout(PATIENCE);
    }

    private Page send(String path, HttpRequest.Builder request) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(request.build(), BodyHandlers.ofString());
        return new Page(path, answer.statusCode(), location(answer), answer.body());
    }

    private Optional<String> location(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").map(target -> {
            URI there = server.resolve(target);
            return there.getRawPath() + (there.getRawQuery() == null ? "" : "?" + there.getRawQuery());
        });
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /**
     * What was answered.
     *
     * @param location where it redirects to, on this server
     */
    record Page(String path, int status, Optional<String> location, String body) {
        /** What a form's hidden field holds. */
        String field(String name) {
            return first("<input[^>]* name=\"" + name + "\"[^>]* value=\"([^\"]*)\"");
        }

        /** What the pattern's group holds where the page first has it. */
        String first(String pattern) {
            Matcher found = Pattern.compile(pattern).matcher(body);
            if (!found.find()) {
                throw new AssertionError(path + " answered " + status + " without " + pattern + ":\n" + body);
            }
            return found.group(1);
        }
    }
}
