package dapple.testing;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Starts PostgreSQL where the build asks for it. */
class PostgresCondition implements ExecutionCondition {
    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        boolean usable = !TestDatabase.isPostgres() || PostgresServer.isAvailable();
        return Missing.unless(usable, "PostgreSQL", context, true);
    }
}
