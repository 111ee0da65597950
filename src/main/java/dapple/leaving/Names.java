package dapple.leaving;

import dapple.people.Erased;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Where the name of a person stands besides the account: in its history, as a signature, in what people wrote. */
@Component
class Names {
    /** The words of a reading are evidence as its number is: the database itself refuses to change them. */
    static final Set<String> EVIDENCE = Set.of("reading", "reading_repeat");

    /** Sessions are ended, not changed; the account itself has its new names. */
    private static final Set<String> ELSEWHERE = Set.of("person", "spring_session", "spring_session_attributes");

    /** Cells that are the name of a person and nothing else. */
    private static final Set<String> SIGNATURES = Set.of("taken_by", "waived_by_name", "report_by", "lender");

    private final StoredColumns columns;
    private final JdbcClient database;

    Names(StoredColumns columns, JdbcClient database) {
        this.columns = columns;
        this.database = database;
    }

    @Transactional(propagation = Propagation.MANDATORY)
    public void replace(Erased erased) {
        database.sql("update person_history set name = :name, sign_in_name = :signInName where id = :id")
                .param("name", erased.instead().name())
                .param("signInName", erased.instead().signInName())
                .param("id", erased.personId())
                .update();
        List<StoredColumn> texts = columns.texts().stream()
                .filter(text -> !EVIDENCE.contains(text.table()) && !ELSEWHERE.contains(text.table()))
                .toList();
        signed(erased)
                .forEach(name -> texts.stream()
                        .filter(text -> SIGNATURES.contains(text.name()))
                        .forEach(text ->
                                replaceSignature(text, name, erased.instead().name())));
        phrases(erased).forEach(phrase -> texts.forEach(text -> replaceIn(text, phrase)));
    }

    private Stream<String> signed(Erased erased) {
        return Stream.concat(Stream.of(erased.signInName()), ownName(erased).stream());
    }

    private Stream<NamePhrase> phrases(Erased erased) {
        String instead = erased.instead().name();
        return Stream.concat(
                ownName(erased).flatMap(name -> NamePhrase.of(name, instead)).stream(),
                NamePhrase.of(erased.signInName(), instead).stream());
    }

    /** Empty where somebody else who is still named has the same name. */
    private Optional<String> ownName(Erased erased) {
        long others = database.sql("select count(*) from person where lower(name) = lower(:name)")
                .param("name", erased.name())
                .query(Long.class)
                .single();
        return others > 0 ? Optional.empty() : Optional.of(erased.name());
    }

    private void replaceSignature(StoredColumn text, String name, String instead) {
        database.sql("update %1$s set %2$s = :instead where lower(trim(%2$s)) = lower(:name)"
                        .formatted(text.table(), text.name()))
                .param("instead", instead)
                .param("name", name)
                .update();
    }

    private void replaceIn(StoredColumn text, NamePhrase phrase) {
        for (String words : holding(text, phrase)) {
            database.sql("update %1$s set %2$s = :new where %2$s = :old".formatted(text.table(), text.name()))
                    .param("new", phrase.replacedIn(words, text.size()))
                    .param("old", words)
                    .update();
        }
    }

    private List<String> holding(StoredColumn text, NamePhrase phrase) {
        return database
                .sql("select distinct %2$s from %1$s where position(lower(:name) in lower(%2$s)) > 0"
                        .formatted(text.table(), text.name()))
                .param("name", phrase.text())
                .query(String.class)
                .list()
                .stream()
                .filter(phrase::isIn)
                .toList();
    }
}
