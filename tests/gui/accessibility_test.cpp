// What an assistive tool finds on the pages of the gallery.
#include "demo/gallery/pictures.hpp"

#include <QAccessible>
#include <QSignalSpy>
#include <QTest>
#include <functional>

namespace spile::gallery {

class AccessibilityTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void eachButtonHasANameAndCanBePressed_data();
    void eachButtonHasANameAndCanBePressed();
    void aPressChoosesARung();
    void whatIsChosenIsSaid();
    void aPressHoldsAtOnce();
    void whatIsDisabledCannotBePressed();
    void theFieldHasItsLabelAndItsError();
    void aCautionIsAnAlert();
    void theTitleIsAHeading();

private:
    QAccessibleInterface* find(QAccessible::Role role, const QString& name);
    void each(const std::function<void(QAccessibleInterface*)>& look);
    void show(const QString& page);
    static void press(QAccessibleInterface* button);

    Pictures pictures_;
    QQuickItem* root_ = nullptr;
};

static void walk(QAccessibleInterface* from, const std::function<void(QAccessibleInterface*)>& look)
{
    look(from);
    for (int i = 0; i < from->childCount(); ++i) {
        walk(from->child(i), look);
    }
}

static QString nameOf(QAccessibleInterface* thing) { return thing->text(QAccessible::Name); }

void AccessibilityTest::initTestCase() { QAccessible::setActive(true); }

void AccessibilityTest::show(const QString& page)
{
    root_ = pictures_.show(static_cast<int>(pictures_.pages().indexOf(page)), 0, {390, 844});
}

void AccessibilityTest::each(const std::function<void(QAccessibleInterface*)>& look)
{
    walk(QAccessible::queryAccessibleInterface(&pictures_.window()), look);
}

QAccessibleInterface* AccessibilityTest::find(QAccessible::Role role, const QString& name)
{
    QAccessibleInterface* found = nullptr;
    each([&](QAccessibleInterface* thing) {
        if (thing->role() == role && nameOf(thing).startsWith(name)) {
            found = thing;
        }
    });
    return found;
}

void AccessibilityTest::press(QAccessibleInterface* button)
{
    button->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
}

void AccessibilityTest::eachButtonHasANameAndCanBePressed_data()
{
    QTest::addColumn<QString>("page");
    for (const QString& page : pictures_.pages()) {
        QTest::newRow(qPrintable(page)) << page;
    }
}

void AccessibilityTest::eachButtonHasANameAndCanBePressed()
{
    QFETCH(const QString, page);
    show(page);
    each([](QAccessibleInterface* thing) {
        if (thing->role() == QAccessible::Button && !thing->state().invisible) {
            QVERIFY(!nameOf(thing).isEmpty());
            QVERIFY(thing->actionInterface() != nullptr);
            QVERIFY(thing->actionInterface()->actionNames().contains(
                QAccessibleActionInterface::pressAction()));
        }
    });
}

void AccessibilityTest::aPressChoosesARung()
{
    show("Score");
    press(find(QAccessible::Button, "clear, 5"));
    QQuickItem* ladder = root_->findChild<QQuickItem*>("ladder");
    QVERIFY(ladder != nullptr);
    QCOMPARE(ladder->property("value").toInt(), 5);
    press(find(QAccessible::Button, "a touch more"));
    QCOMPARE(ladder->property("value").toInt(), 6);
}

void AccessibilityTest::whatIsChosenIsSaid()
{
    show("Chips");
    QVERIFY(find(QAccessible::Button, "Vinegar")->state().checkable);
    QVERIFY(find(QAccessible::Button, "Vinegar")->state().checked);
    QVERIFY(!find(QAccessible::Button, "Nail polish")->state().checked);
    press(find(QAccessible::Button, "Nail polish"));
    QVERIFY(find(QAccessible::Button, "Nail polish")->state().checked);
}

void AccessibilityTest::aPressHoldsAtOnce()
{
    show("Holding");
    QQuickItem* hold = root_->findChild<QQuickItem*>("hold");
    QVERIFY(hold != nullptr);
    const QSignalSpy held(hold, SIGNAL(held()));
    press(find(QAccessible::Button, "Empty this barrel"));
    QCOMPARE(held.count(), 1);
}

void AccessibilityTest::whatIsDisabledCannotBePressed()
{
    show("Pads");
    QQuickItem* pad = root_->findChild<QQuickItem*>("disabled");
    QVERIFY(pad != nullptr);
    const QSignalSpy fired(pad, SIGNAL(fired()));
    QAccessibleInterface* button = find(QAccessible::Button, "Close the sheet");
    QCOMPARE(button->text(QAccessible::Description), QString("Not available now"));
    press(button);
    QCOMPARE(fired.count(), 0);
}

void AccessibilityTest::theFieldHasItsLabelAndItsError()
{
    show("Words");
    QAccessibleInterface* field = find(QAccessible::EditableText, "Tare weight, kg");
    QVERIFY(field != nullptr);
    QCOMPARE(field->text(QAccessible::Description), QString("That is not a number."));
}

void AccessibilityTest::aCautionIsAnAlert()
{
    show("Banners");
    QVERIFY(find(QAccessible::AlertMessage, "Caution: Carbon dioxide") != nullptr);
}

void AccessibilityTest::theTitleIsAHeading()
{
    show("Score");
    QVERIFY(find(QAccessible::Heading, "Vanilla") != nullptr);
}

}  // namespace spile::gallery

QTEST_MAIN(spile::gallery::AccessibilityTest)
#include "accessibility_test.moc"
