package dapple.reading;

import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Marks and sentences, for every page that shows a reading. */
@ControllerAdvice
class ReadingAdvice {
    private final Marks marks;
    private final Sentences sentences;

    ReadingAdvice(Marks marks, Sentences sentences) {
        this.marks = marks;
        this.sentences = sentences;
    }

    @ModelAttribute("marks")
    Marks marks() {
        return marks;
    }

    @ModelAttribute("sentences")
    Sentences sentences() {
        return sentences;
    }
}
