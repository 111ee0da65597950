package dapple.demo;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Primary;
import org.springframework.context.annotation.Profile;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.util.function.SingletonSupplier;

/** Hashes the password of the demo's people once for all of them: everybody knows it, and hashing is slow on purpose. */
@Primary
@Component
@Profile("demo")
class DemoPasswords implements PasswordEncoder {
    /** What the sign-in page of the demo tells everybody. */
    static final String KNOWN = "dapple";

    private final PasswordEncoder encoder = PasswordEncoderFactories.createDelegatingPasswordEncoder();
    private final Supplier<@Nullable String> hashOfKnown = SingletonSupplier.of(() -> encoder.encode(KNOWN));

    @Override
    public @Nullable String encode(@Nullable CharSequence password) {
        return password != null && KNOWN.contentEquals(password) ? hashOfKnown.get() : encoder.encode(password);
    }

    @Override
    public boolean matches(@Nullable CharSequence password, @Nullable String hash) {
        return encoder.matches(password, hash);
    }

    @Override
    public boolean upgradeEncoding(@Nullable String hash) {
        return encoder.upgradeEncoding(hash);
    }
}
