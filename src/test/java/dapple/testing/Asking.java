package dapple.testing;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.HashMap;
import java.util.Map;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** Asks for pages and sends forms as one person does. */
public record Asking(MockMvc pages, RequestPostProcessor person) {
    public ResultActions see(String path) throws Exception {
        return pages.perform(get(path).with(csrf()).with(person));
    }

    public ResultActions send(String path, Map<String, String> form) throws Exception {
        MockHttpServletRequestBuilder request = post(path).with(csrf()).with(person);
        form.forEach(request::param);
        return pages.perform(request);
    }

    /** A form in which one field is typed otherwise. */
    public ResultActions send(String path, Map<String, String> form, String field, String typed) throws Exception {
        Map<String, String> changed = new HashMap<>(form);
        changed.put(field, typed);
        return send(path, changed);
    }
}
