package dapple.people;

import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.stereotype.Component;

/** Signs a person in by name and password, and refuses to try too often. */
@Component
class PasswordSignIn implements AuthenticationProvider {
    private final Accounts accounts;
    private final SignInAttempts attempts;

    PasswordSignIn(Accounts accounts, SignInAttempts attempts) {
        this.accounts = accounts;
        this.attempts = attempts;
    }

    @Override
    public Authentication authenticate(Authentication asked) {
        String name = asked.getName();
        String address = address(asked.getDetails());
        if (!attempts.mayTry(name, address)) {
            throw new LockedException("too many attempts");
        }
        SignedIn person = accounts.withPassword(name, String.valueOf(asked.getCredentials()))
                .orElseThrow(() -> new BadCredentialsException("name and password do not match"));
        attempts.succeeded(name, address);
        return of(person);
    }

    private static String address(@Nullable Object details) {
        return details instanceof WebAuthenticationDetails web ? String.valueOf(web.getRemoteAddress()) : "";
    }

    static Authentication of(SignedIn person) {
        Set<GrantedAuthority> roles = person.roles().stream()
                .map(role -> new SimpleGrantedAuthority("ROLE_" + role.name()))
                .collect(Collectors.toSet());
        return UsernamePasswordAuthenticationToken.authenticated(person, null, roles);
    }

    @Override
    public boolean supports(Class<?> kind) {
        return UsernamePasswordAuthenticationToken.class.isAssignableFrom(kind);
    }
}
