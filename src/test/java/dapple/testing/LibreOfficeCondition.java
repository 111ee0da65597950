package dapple.testing;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Looks for LibreOffice. */
class LibreOfficeCondition implements ExecutionCondition {
    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        return Missing.unless(LibreOffice.isInstalled(), "LibreOffice's spreadsheet", context, false);
    }
}
