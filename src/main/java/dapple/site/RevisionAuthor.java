package dapple.site;

import org.hibernate.envers.RevisionListener;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;

/** Puts the signed-in person's id on each revision; the program's own changes carry none. */
class RevisionAuthor implements RevisionListener {
    @Override
    public void newRevision(Object revision) {
        Authentication signedIn = SecurityContextHolder.getContext().getAuthentication();
        if (signedIn != null && signedIn.getPrincipal() instanceof Author author) {
            ((Revision) revision).by(author.personId());
        }
    }
}
