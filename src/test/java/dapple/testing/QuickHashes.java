package dapple.testing;

import java.util.Map;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.context.annotation.Primary;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;

/**
 * The program's own hash at the least cost that it has. At the program's cost, which is meant to be slow, adding people
 * took five sixths of the time of all tests of pages; that the program keeps its cost is tested beside it.
 */
@TestComponent
@Primary
class QuickHashes extends DelegatingPasswordEncoder {
    private static final int LEAST = 4;

    QuickHashes() {
        super("bcrypt", Map.of("bcrypt", new BCryptPasswordEncoder(LEAST)));
    }
}
