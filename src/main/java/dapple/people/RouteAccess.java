package dapple.people;

import dapple.site.Open;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.authorization.AuthorizationResult;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;
import org.springframework.stereotype.Component;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerExecutionChain;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.ServletRequestPathUtils;

/**
 * Allows a route to those whose roles allow the action that its controller names. What no controller answers is left
 * to signed-in people, who then get the page for 404.
 */
@Component
class RouteAccess implements AuthorizationManager<RequestAuthorizationContext> {
    private final RequestMappingHandlerMapping routes;

    RouteAccess(@Qualifier("requestMappingHandlerMapping") RequestMappingHandlerMapping routes) {
        this.routes = routes;
    }

    @Override
    public AuthorizationResult authorize(
            Supplier<? extends @Nullable Authentication> asking, RequestAuthorizationContext context) {
        Optional<HandlerMethod> route = route(context.getRequest());
        if (route.filter(found -> annotation(found, Open.class).isPresent()).isPresent()) {
            return new AuthorizationDecision(true);
        }
        Authentication authentication = asking.get();
        if (authentication == null || !(authentication.getPrincipal() instanceof SignedIn person)) {
            return new AuthorizationDecision(false);
        }
        return new AuthorizationDecision(route.isEmpty() || isAllowed(person, route.get()));
    }

    private static boolean isAllowed(SignedIn person, HandlerMethod route) {
        return annotation(route, Allowed.class)
                .map(Allowed::value)
                .filter(person::may)
                .isPresent();
    }

    private static <A extends java.lang.annotation.Annotation> Optional<A> annotation(
            HandlerMethod route, Class<A> kind) {
        return Optional.ofNullable(AnnotatedElementUtils.findMergedAnnotation(route.getMethod(), kind))
                .or(() -> Optional.ofNullable(AnnotatedElementUtils.findMergedAnnotation(route.getBeanType(), kind)));
    }

    private Optional<HandlerMethod> route(HttpServletRequest request) {
        try {
            ServletRequestPathUtils.parseAndCache(request);
            HandlerExecutionChain found = routes.getHandler(request);
            return found != null && found.getHandler() instanceof HandlerMethod method
                    ? Optional.of(method)
                    : Optional.empty();
        } catch (HttpRequestMethodNotSupportedException otherMethod) {
            return Optional.empty();
        } catch (Exception cause) {
            throw new IllegalStateException("cannot find the route of " + request.getRequestURI(), cause);
        }
    }
}
