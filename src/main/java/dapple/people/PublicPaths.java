package dapple.people;

import java.util.List;
import java.util.Set;

/** Files that every page needs, before anyone has signed in. */
final class PublicPaths {
    static final String[] ASSETS = {
        "/css/**", "/js/**", "/font/**", "/icon/**", "/webjars/**", "/sw.js", "/manifest.webmanifest"
    };

    private static final List<String> ASSET_FOLDERS = List.of("/css/", "/js/", "/font/", "/icon/", "/webjars/");

    private static final Set<String> ASSET_FILES = Set.of("/sw.js", "/manifest.webmanifest");

    private PublicPaths() {}

    static boolean isAsset(String path) {
        return ASSET_FILES.contains(path) || ASSET_FOLDERS.stream().anyMatch(path::startsWith);
    }
}
