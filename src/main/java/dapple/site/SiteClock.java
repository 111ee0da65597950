package dapple.site;

import java.time.Clock;
import java.time.Duration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Profile;

/** The clock that everything reads: whole microseconds, as both databases keep them. */
@Configuration(proxyBeanMethods = false)
class SiteClock {
    private static final Duration MICROSECOND = Duration.ofNanos(1000);

    @Bean
    @Profile("!demo")
    Clock clock() {
        return Clock.tick(Clock.systemUTC(), MICROSECOND);
    }
}
