package dapple.reading;

import java.util.Optional;
import org.springframework.data.repository.Repository;

interface ReadingWithdrawalRepository extends Repository<ReadingWithdrawal, Long> {
    ReadingWithdrawal saveAndFlush(ReadingWithdrawal withdrawal);

    Optional<ReadingWithdrawal> findByReadingId(long readingId);
}
