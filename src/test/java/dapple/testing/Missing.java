package dapple.testing;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Says loudly what a machine lacks, and how many test classes or methods were skipped for it. */
final class Missing {
    private static final Map<String, Integer> SKIPPED = new TreeMap<>();

    static {
        Runtime.getRuntime().addShutdownHook(new Thread(Missing::sayHowMany));
    }

    private Missing() {}

    static synchronized ConditionEvaluationResult unless(
            boolean present, String what, ExtensionContext context, boolean required) {
        if (present) {
            return ConditionEvaluationResult.enabled(what + " is here");
        }
        if (required && Strict.on()) {
            throw new IllegalStateException("strict build: this machine lacks " + what);
        }
        if (SKIPPED.merge(what, 1, Integer::sum) == 1) {
            System.out.println("\n######## SKIPPING TESTS: this machine lacks " + what + " ########\n");
        }
        return ConditionEvaluationResult.disabled("this machine lacks " + what + ": " + context.getDisplayName());
    }

    private static void sayHowMany() {
        SKIPPED.forEach((what, count) ->
                System.out.println("######## Skipped for want of " + what + ": " + count + " ########"));
    }
}
