package dapple.people;

import java.util.List;

/** Files that every page needs, before anyone has signed in. */
final class PublicPaths {
    static final String[] ASSETS = {"/css/**", "/js/**", "/font/**", "/icon/**", "/webjars/**"};

    private static final List<String> ASSET_FOLDERS = List.of("/css/", "/js/", "/font/", "/icon/", "/webjars/");

    private PublicPaths() {}

    static boolean isAsset(String path) {
        return ASSET_FOLDERS.stream().anyMatch(path::startsWith);
    }
}
