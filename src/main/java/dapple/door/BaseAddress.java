package dapple.door;

import java.util.List;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** Where the program answers, as the browser sees it that asks. */
record BaseAddress(String text) {
    /** Names of the machine itself, which no other can reach. */
    private static final List<String> ONLY_HERE = List.of("//localhost", "//127.", "//[::1]", "//[0:0:0:0:0:0:0:1]");

    static BaseAddress ofRequest() {
        return new BaseAddress(
                ServletUriComponentsBuilder.fromCurrentContextPath().toUriString());
    }

    /** What a phone opens that scans the label of a door. */
    String of(DoorCode code) {
        return text + "/d/" + code.text();
    }

    public boolean isOnlyHere() {
        return ONLY_HERE.stream().anyMatch(text::contains);
    }
}
