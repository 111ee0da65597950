package dapple.testing;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Looks for Chromium and its driver. */
class ChromiumCondition implements ExecutionCondition {
    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        return Missing.unless(Chromium.isInstalled(), "Chromium and chromedriver", context, true);
    }
}
