package dapple.testing;

import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import net.ttddyy.dsproxy.ExecutionInfo;
import net.ttddyy.dsproxy.QueryInfo;
import net.ttddyy.dsproxy.listener.QueryExecutionListener;
import net.ttddyy.dsproxy.support.ProxyDataSourceBuilder;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.test.context.TestComponent;

/** What this thread has asked the database, whoever asked for it; reading and renewing the session is left out. */
@TestComponent
public class StatementCount implements BeanPostProcessor {
    private final ThreadLocal<List<String>> asked = ThreadLocal.withInitial(ArrayList::new);

    @Override
    public Object postProcessAfterInitialization(Object bean, String name) {
        if (bean instanceof DataSource database) {
            return ProxyDataSourceBuilder.create(database)
                    .listener(new Listening())
                    .build();
        }
        return bean;
    }

    /** Forgets what was asked before. */
    public void begin() {
        asked.get().clear();
    }

    /** What was asked since the count began, in its order. */
    public List<String> asked() {
        return List.copyOf(asked.get());
    }

    private final class Listening implements QueryExecutionListener {
        @Override
        public void beforeQuery(ExecutionInfo execution, List<QueryInfo> queries) {}

        @Override
        public void afterQuery(ExecutionInfo execution, List<QueryInfo> queries) {
            queries.stream()
                    .map(QueryInfo::getQuery)
                    .filter(query -> !query.contains("SPRING_SESSION"))
                    .forEach(asked.get()::add);
        }
    }
}
