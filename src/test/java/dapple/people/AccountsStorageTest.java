package dapple.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.orm.ObjectOptimisticLockingFailureException;

@StorageTest
class AccountsStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Accounts accounts;

    @Autowired
    private People people;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;

    @BeforeEach
    void hire() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
    }

    @Test
    void letsInWithTheRightPassword() {
        assertThat(accounts.withPassword(keeper.signInName(), collection.password()))
                .contains(keeper);
    }

    @Test
    void comparesNamesWithoutCaseAndSpaces() {
        assertThat(accounts.withPassword(" " + keeper.signInName().toUpperCase(Locale.ROOT), collection.password()))
                .isPresent();
    }

    @Test
    void letsNobodyInWithAWrongPassword() {
        assertThat(accounts.withPassword(keeper.signInName(), "another password"))
                .isEmpty();
    }

    @Test
    void letsNobodyInWhoIsUnknown() {
        assertThat(accounts.withPassword("nobody", collection.password())).isEmpty();
    }

    @Test
    void endsADeactivatedAccountAtOnce() {
        people.deactivate(site.id(), keeper.personId());
        assertThat(accounts.asOfNow(keeper.personId())).isEmpty();
    }

    @Test
    void letsAReactivatedPersonInAgain() {
        people.deactivate(site.id(), keeper.personId());
        people.reactivate(site.id(), keeper.personId());
        assertThat(accounts.asOfNow(keeper.personId())).contains(keeper);
    }

    @Test
    void letsAnInspectorInOnTheLastDay() {
        assertThat(accounts.asOfNow(inspectorUntil(today()))).isPresent();
    }

    @Test
    void letsAnInspectorInNoMoreAfterTheLastDay() {
        assertThat(accounts.asOfNow(inspectorUntil(today().minusDays(1)))).isEmpty();
    }

    @Test
    void seesANewRoleAtOnce() {
        change(people.get(site.id(), keeper.personId()).version(), Set.of(Role.KEEPER, Role.SUPERVISOR));
        assertThat(accounts.asOfNow(keeper.personId()).map(SignedIn::roles))
                .contains(Set.of(Role.KEEPER, Role.SUPERVISOR));
    }

    @Test
    void refusesAChangeMadeFromAnOlderState() {
        long version = people.get(site.id(), keeper.personId()).version();
        change(version, Set.of(Role.SUPERVISOR));
        assertThatThrownBy(() -> change(version, Set.of(Role.VET)))
                .isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void refusesASignInNameThatIsTaken() {
        NewPerson namesake = new NewPerson(keeper.signInName(), "Somebody Else", "another long password");
        assertThatThrownBy(() -> people.add(site.id(), namesake, Set.of(Role.VET), Optional.empty()))
                .isInstanceOf(ConflictException.class);
    }

    @Test
    void knowsNobodyOfAnotherSite() {
        SiteFacts elsewhere = collection.site();
        assertThatThrownBy(() -> people.get(elsewhere.id(), keeper.personId())).isInstanceOf(NotFoundException.class);
    }

    @Test
    void setsANewPasswordAgainstAResetCode() {
        String code = people.allowReset(site.id(), keeper.personId());
        people.resetPassword(keeper.signInName(), code, "a brand new password");
        assertThat(accounts.withPassword(keeper.signInName(), "a brand new password"))
                .isPresent();
    }

    @Test
    void acceptsAResetCodeOnce() {
        String code = people.allowReset(site.id(), keeper.personId());
        people.resetPassword(keeper.signInName(), code, "a brand new password");
        assertThat(people.resetPassword(keeper.signInName(), code, "yet another password"))
                .isFalse();
    }

    @Test
    void acceptsNoResetCodeOfSomebodyElse() {
        String code = people.allowReset(site.id(), keeper.personId());
        SignedIn other = collection.person(site, Role.KEEPER);
        assertThat(people.resetPassword(other.signInName(), code, "a brand new password"))
                .isFalse();
    }

    @Test
    void acceptsNoResetCodeOfADeactivatedPerson() {
        String code = people.allowReset(site.id(), keeper.personId());
        people.deactivate(site.id(), keeper.personId());
        assertThat(people.resetPassword(keeper.signInName(), code, "a brand new password"))
                .isFalse();
    }

    private void change(long version, Set<Role> roles) {
        people.change(site.id(), keeper.personId(), version, new PersonChange("New Name", roles, Optional.empty()));
    }

    private long inspectorUntil(LocalDate lastDay) {
        String name = "inspector" + keeper.personId();
        return people.add(
                site.id(),
                new NewPerson(name, "An Inspector", "a long password"),
                Set.of(Role.INSPECTOR),
                Optional.of(lastDay));
    }

    private LocalDate today() {
        return LocalDate.now(clock.withZone(site.timeZone()));
    }
}
