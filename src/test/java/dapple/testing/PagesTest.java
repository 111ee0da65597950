package dapple.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Pages asked for without a server, on the database of {@link StorageTest}. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@StorageTest
public @interface PagesTest {}
