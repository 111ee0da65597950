package dapple.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.ContextConfiguration;

/** The whole application on an empty database: H2 in {@code mvn test}, PostgreSQL as well in {@code mvn verify}. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@OnEachDatabase
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.MOCK)
@ContextConfiguration(initializers = TestDatabase.class)
@Import({TestCollection.class, RiggedHomes.class, DraftedHomes.class})
public @interface StorageTest {}
