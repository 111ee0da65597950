package dapple.browser;

import java.util.function.Consumer;

/**
 * One page as somebody comes to see it.
 *
 * @param name what it is called in the list of tests
 * @param person who may see it, by sign-in name; empty for nobody signed in
 * @param status the HTTP status of the page that is seen in the end
 * @param way how to come there
 */
record View(String name, String person, int status, Consumer<Browser> way) {
    static View of(String name, String person, String path) {
        return new View(name, person, 200, browser -> browser.open(path));
    }

    View called(String other) {
        return new View(other, person, status, way);
    }

    View withStatus(int expected) {
        return new View(name, person, expected, way);
    }

    View then(Consumer<Browser> further) {
        return new View(name, person, status, way.andThen(further));
    }

    void show(Browser browser) {
        if (person.isEmpty()) {
            browser.signOut();
        } else {
            browser.signInAs(person);
        }
        way.accept(browser);
    }
}
