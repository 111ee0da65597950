package dapple.people;

import java.util.List;
import java.util.stream.Stream;

/** Files that every page needs, before anyone has signed in. */
final class PublicPaths {
    static final List<String> FOLDERS = List.of("css", "js", "font", "icon");

    /** The folder of files of libraries. */
    static final String LIBRARIES = "webjars";

    static final List<String> FILES = List.of("sw.js", "manifest.webmanifest");

    static final String[] ASSETS =
            Stream.concat(folders().map(folder -> folder + "**"), files()).toArray(String[]::new);

    private PublicPaths() {}

    static boolean isAsset(String path) {
        return files().anyMatch(path::equals) || folders().anyMatch(path::startsWith);
    }

    private static Stream<String> folders() {
        return Stream.concat(FOLDERS.stream(), Stream.of(LIBRARIES)).map(folder -> "/" + folder + "/");
    }

    private static Stream<String> files() {
        return FILES.stream().map(file -> "/" + file);
    }
}
