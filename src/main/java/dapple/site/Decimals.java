package dapple.site;

import java.math.BigDecimal;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.convert.converter.Converter;
import org.springframework.format.FormatterRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Numbers as people type them: a comma is a decimal point, since many phones offer no other key. */
@Configuration(proxyBeanMethods = false)
class Decimals implements WebMvcConfigurer {
    @Override
    public void addFormatters(FormatterRegistry registry) {
        registry.addConverter(new FromText());
    }

    /** Refuses what is no number, so that the form shows the text again as it was typed. */
    static class FromText implements Converter<String, BigDecimal> {
        @Override
        public BigDecimal convert(String text) {
            return new BigDecimal(text.strip().replace(',', '.'));
        }
    }
}
