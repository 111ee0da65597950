package dapple.site;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.people.Role;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import jakarta.servlet.DispatcherType;
import jakarta.servlet.RequestDispatcher;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@PagesTest
class ErrorPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private MockMvc pages;

    @ParameterizedTest
    @CsvSource({
        "400, Not understood",
        "405, Not understood",
        "403, Not for your role",
        "404, Not found",
        "409, Changed meanwhile",
        "500, Something broke"
    })
    void eachHasAPageOfOurs(int code, String title) throws Exception {
        fail(code).andExpect(status().is(code)).andExpect(content().string(containsString("<h1>" + title + "</h1>")));
    }

    @ParameterizedTest
    @CsvSource({"400", "403", "404", "409", "500"})
    void noneShowsWhatTheProgramSays(int code) throws Exception {
        fail(code)
                .andExpect(content().string(not(containsString("IllegalStateException"))))
                .andExpect(content().string(not(containsString("inner secret"))));
    }

    private ResultActions fail(int code) throws Exception {
        MockHttpServletRequestBuilder request = get("/error")
                .accept(MediaType.TEXT_HTML)
                .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, code)
                .requestAttr(RequestDispatcher.ERROR_EXCEPTION, new IllegalStateException("inner secret"))
                .with(collection.as(collection.person(collection.site(), Role.KEEPER)))
                .with(asked -> {
                    asked.setDispatcherType(DispatcherType.ERROR);
                    return asked;
                });
        return pages.perform(request);
    }
}
