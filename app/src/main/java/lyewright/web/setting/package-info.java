/**
 * The page of settings: what the workshop is set to, backups and putting one back, and where everything is kept.
 *
 * <p>Lives here: {@link lyewright.web.setting.SettingPages}, the door.
 *
 * <p>May use: engine, records, template, and the frame in {@code lyewright.web}. Used by: app.
 *
 * <p>Change freely: everything package-private, and the templates below {@code jte/setting}. Keep: a backup is put back only
 * after what is in it was shown and asked about.
 */
@NullMarked
package lyewright.web.setting;

import org.jspecify.annotations.NullMarked;
