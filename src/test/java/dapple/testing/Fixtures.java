package dapple.testing;

import org.springframework.boot.test.context.TestComponent;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.FilterType;

/** What tests use beside the program, all of it for every test and made when first asked for. */
@ComponentScan(
        basePackages = "dapple",
        lazyInit = true,
        useDefaultFilters = false,
        includeFilters = @ComponentScan.Filter(TestComponent.class),
        excludeFilters = @ComponentScan.Filter(type = FilterType.REGEX, pattern = "dapple\\.browser\\..*"))
class Fixtures {}
