package dapple.people;

import jakarta.servlet.DispatcherType;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.CsrfConfigurer;
import org.springframework.security.config.annotation.web.configurers.LogoutConfigurer;
import org.springframework.security.config.annotation.web.configurers.RequestCacheConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/** Sign-in, what may be loaded by a page, and who may take which route. */
@Configuration(proxyBeanMethods = false)
class SecurityRules {
    /** Everything from this server alone; no inline script or style, no eval, no frames, no foreign form targets. */
    static final String CONTENT_SECURITY_POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; "
            + "img-src 'self'; font-src 'self'; connect-src 'self'; manifest-src 'self'; "
            + "form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    @Bean
    PasswordEncoder passwordEncoder() {
        return PasswordEncoderFactories.createDelegatingPasswordEncoder();
    }

    /** Programs: a key with each request, no session, no cookie, and so nothing to forge. */
    @Bean
    @Order(1)
    SecurityFilterChain programs(HttpSecurity http, Keys keys, SignInAttempts attempts, RouteAccess routes) {
        http.securityMatcher("/api/**")
                .csrf(CsrfConfigurer::disable)
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .requestCache(RequestCacheConfigurer::disable)
                .logout(LogoutConfigurer::disable)
                .addFilterBefore(new KeyAccess(keys, attempts), AuthorizationFilter.class)
                .authorizeHttpRequests(requests -> requests.anyRequest().access(routes))
                .exceptionHandling(refusals -> refusals.authenticationEntryPoint(KeyAccess::refuseNobody)
                        .accessDeniedHandler(KeyAccess::refuseRole));
        return http.build();
    }

    @Bean
    SecurityFilterChain pages(
            HttpSecurity http, PasswordSignIn signIn, Accounts accounts, RouteAccess routes, FirstRun firstRun) {
        http.authenticationProvider(signIn)
                .addFilterBefore(new FirstRunFilter(firstRun), AuthorizationFilter.class)
                .addFilterBefore(new FreshAccess(accounts), AuthorizationFilter.class)
                .authorizeHttpRequests(requests -> requests.dispatcherTypeMatchers(DispatcherType.ERROR)
                        .permitAll()
                        .requestMatchers(PublicPaths.ASSETS)
                        .permitAll()
                        .requestMatchers("/actuator/health", "/actuator/health/**")
                        .permitAll()
                        .anyRequest()
                        .access(routes))
                .formLogin(form -> form.loginPage("/sign-in")
                        .usernameParameter("signInName")
                        .passwordParameter("password")
                        .failureHandler((request, response, failure) -> response.sendRedirect(
                                failure instanceof LockedException ? "/sign-in?wait" : "/sign-in?again")))
                .logout(out -> out.logoutUrl("/sign-out").logoutSuccessUrl("/sign-in?out"))
                .headers(headers -> headers.httpStrictTransportSecurity(hsts -> hsts.includeSubDomains(false))
                        .contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_SECURITY_POLICY))
                        .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                        .permissionsPolicyHeader(
                                permissions -> permissions.policy("camera=(self), microphone=(), geolocation=()")));
        return http.build();
    }
}
