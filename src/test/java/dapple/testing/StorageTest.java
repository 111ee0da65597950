package dapple.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.ContextConfiguration;

/**
 * The whole application on an empty database: H2 in {@code mvn test}, PostgreSQL as well in {@code mvn verify}. A test that
 * adds beans or properties of its own has another application started for it; all others share one.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@OnEachDatabase
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.MOCK)
@ContextConfiguration(initializers = TestDatabase.class)
@AutoConfigureMockMvc
@Import(Fixtures.class)
public @interface StorageTest {}
