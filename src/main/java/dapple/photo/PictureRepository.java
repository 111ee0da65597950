package dapple.photo;

import java.util.Optional;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface PictureRepository extends Repository<Picture, Long> {
    Picture saveAndFlush(Picture picture);

    @Query("""
            select i.content from Picture i join Photo p on p.id = i.photoId
            where p.siteId = :siteId and p.id = :photoId and i.scale = :scale""")
    Optional<byte[]> content(long siteId, long photoId, Scale scale);

    @Modifying
    @Query("delete from Picture i where i.photoId = :photoId")
    void deleteOf(long photoId);
}
