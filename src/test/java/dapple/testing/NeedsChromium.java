package dapple.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/** Runs where Chromium and its driver are installed; elsewhere skipped, or failed in a strict build. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@ExtendWith(ChromiumCondition.class)
public @interface NeedsChromium {}
