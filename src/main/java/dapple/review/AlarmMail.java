package dapple.review;

import dapple.site.Formats;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.MessageSource;
import org.springframework.core.task.TaskExecutor;
import org.springframework.mail.MailException;
import org.springframework.mail.SimpleMailMessage;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;

/**
 * Tells of a reading over the ceiling by mail, where an installation names a mail server ({@code spring.mail.host}) and
 * to whom ({@code dapple.alarm.mail-to}). The banner does not depend on it.
 */
@Component
class AlarmMail {
    private static final Logger LOG = LoggerFactory.getLogger(AlarmMail.class);

    private final ObjectProvider<JavaMailSender> sender;
    private final TaskExecutor tasks;
    private final Alarms alarms;
    private final Sites sites;
    private final Formats formats;
    private final MessageSource messages;
    private final List<String> recipients;
    private final String from;

    AlarmMail(
            ObjectProvider<JavaMailSender> sender,
            TaskExecutor tasks,
            Alarms alarms,
            Sites sites,
            Formats formats,
            MessageSource messages,
            @Value("${dapple.alarm.mail-to:}") List<String> recipients,
            @Value("${dapple.alarm.mail-from:dapple@localhost}") String from) {
        this.sender = sender;
        this.tasks = tasks;
        this.alarms = alarms;
        this.sites = sites;
        this.formats = formats;
        this.messages = messages;
        this.recipients = recipients.stream().filter(one -> !one.isBlank()).toList();
        this.from = from;
    }

    /** After the reading is stored, and beside it: a mail server that is slow or away delays nobody. */
    @TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
    void tell(AlarmRaised raised) {
        JavaMailSender mail = sender.getIfAvailable();
        if (mail != null && !recipients.isEmpty()) {
            tasks.execute(() -> send(mail, raised));
        }
    }

    private void send(JavaMailSender mail, AlarmRaised raised) {
        SiteFacts site = sites.get(raised.siteId());
        alarms.unseen(raised.siteId()).stream()
                .filter(alarm -> alarm.readingId() == raised.readingId())
                .forEach(alarm -> send(mail, site, alarm));
    }

    private void send(JavaMailSender mail, SiteFacts site, AlarmFacts alarm) {
        Object[] where = {
            site.name(),
            alarm.enclosure(),
            alarm.point(),
            alarm.place(),
            formats.dayAndTime(alarm.takenAt(), site.timeZone())
        };
        SimpleMailMessage message = new SimpleMailMessage();
        message.setFrom(from);
        message.setTo(recipients.toArray(String[]::new));
        message.setSubject(text("alarm.mail.subject", where));
        message.setText(text("alarm.mail.text", where));
        try {
            mail.send(message);
        } catch (MailException failed) {
            LOG.warn("could not mail that {} is over its ceiling", alarm.enclosure(), failed);
        }
    }

    private String text(String key, Object... where) {
        return Objects.requireNonNull(messages.getMessage(key, where, Locale.UK));
    }
}
