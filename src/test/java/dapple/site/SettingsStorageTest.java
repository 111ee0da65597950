package dapple.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.orm.ObjectOptimisticLockingFailureException;

@StorageTest
class SettingsStorageTest {
    private static final Settings OTHERS =
            new Settings(7, 20, 10, 30, 20, 0.7, 1.4, 10, 4, true, true, RepeatsAsked.EVERYWHERE, true, 6);

    @Autowired
    private Sites sites;

    @Autowired
    private TestCollection collection;

    private long siteId;

    @BeforeEach
    void found() {
        siteId = collection.site().id();
    }

    @Test
    void areTheUsualOnesUntilChanged() {
        assertThat(sites.settings(siteId)).isEqualTo(Settings.USUAL);
    }

    @Test
    void keepWhatWasSettled() {
        sites.settle(siteId, 0, OTHERS);
        assertThat(sites.settings(siteId)).isEqualTo(OTHERS);
    }

    @Test
    void changeASecondTime() {
        sites.settle(siteId, 0, OTHERS);
        sites.settle(siteId, sites.settingsVersion(siteId), Settings.USUAL);
        assertThat(sites.settings(siteId)).isEqualTo(Settings.USUAL);
    }

    @Test
    void refuseAnOlderState() {
        sites.settle(siteId, 0, OTHERS);
        assertThatThrownBy(() -> sites.settle(siteId, 0, Settings.USUAL))
                .isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void belongToOneSiteAlone() {
        sites.settle(siteId, 0, OTHERS);
        assertThat(sites.settings(collection.site().id())).isEqualTo(Settings.USUAL);
    }
}
