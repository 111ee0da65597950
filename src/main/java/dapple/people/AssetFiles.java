package dapple.people;

import java.time.Duration;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.CacheControl;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.servlet.resource.VersionResourceResolver;

/**
 * Shows the files that every page needs under their own names alone: were they looked for anywhere, so would be every link of
 * every page. Those in folders have their content in their name, and are kept by browsers for a year.
 */
@Configuration(proxyBeanMethods = false)
class AssetFiles implements WebMvcConfigurer {
    private static final String OURS = "classpath:/static/";
    private static final String OF_LIBRARIES = "classpath:/META-INF/resources/webjars/";
    private static final Duration KEPT = Duration.ofDays(365);

    @Override
    public void addResourceHandlers(ResourceHandlerRegistry registry) {
        PublicPaths.FOLDERS.forEach(folder -> named(registry, folder, OURS + folder + "/"));
        named(registry, PublicPaths.LIBRARIES, OF_LIBRARIES);
        PublicPaths.FILES.forEach(file -> registry.addResourceHandler("/" + file)
                .addResourceLocations(OURS)
                .setCacheControl(CacheControl.noCache()));
    }

    private static void named(ResourceHandlerRegistry registry, String folder, String location) {
        registry.addResourceHandler("/" + folder + "/**")
                .addResourceLocations(location)
                .setCacheControl(CacheControl.maxAge(KEPT))
                .resourceChain(true)
                .addResolver(new VersionResourceResolver().addContentVersionStrategy("/**"));
    }
}
