#pragma once

#include "core/outlook/course.hpp"

/// How a course is fitted: shape by shape and noise by noise, each a normal posterior over the
/// shape's amounts, the tasters' biases and, where a session has scores at an end of the line, that
/// session's own deviation. Private to course_*.cpp.
namespace spile::outlook {

class CourseFit {
public:
    CourseFit(const CourseModel& model, const CourseData& data, Course& course);
    void run();

private:
    static constexpr double square(double x) { return x * x; }

    struct Session {
        int number = 0;
        std::vector<std::size_t> records;
        bool apart = false;                 // has a dimension of its own
        std::size_t place = 0;              // of that, in the state
        double shared = 0;                  // rho^2 / (1 + rho^2 sum w), if it has none
        double weight = 0;                  // sum w of the scores that are not cut
        std::array<double, 3> rowSum = {};  // of the shape that is being fitted
        double restSum = 0;
    };
    struct Site {  // what a score at an end says, as a normal
        std::size_t record = 0;
        double precision = 0, shift = 0;
    };

    void arrange();
    void arrange(Session& session);
    void makeRoom();
    void sumFixed();
    void sumFixed(const Session& session, std::size_t record);
    void fitShape(std::uint32_t shape);
    void sumScore(const Course::ShapeNow& now, Session& session, std::size_t record);
    void takeShared(const Session& session);
    void fitNoise(std::uint32_t shape, const GridPoint& noise);
    [[nodiscard]] double sumPrecision(const Shape& shape, double scale);
    void keep(std::uint32_t shape, double logWeight, double sigma, const Suspect& suspect);
    void finish();
    void suspect(const Suspect& suspect, double chance);
    void move(std::size_t from, std::size_t to);

    // Of course_wrongs.cpp: the same part with one score or session doubted, for each of them.
    struct Doubt {
        Suspect suspect;
        double variance = 0;       // what is added to its noise
        double own = 0, rest = 0;  // e'N^-1 e and e'N^-1 r times sigma^2, e what is doubted;
    };                             // X'N^-1 e lies in lean_
    void addWrongs(std::uint32_t shape, double logWeight, double sigma);
    [[nodiscard]] Doubt doubtScore(const Session& session, std::size_t record);
    [[nodiscard]] Doubt doubtSession(const Session& session);
    void addWrong(std::uint32_t shape, double logWeight, double sigma, const Doubt& doubt);

    // Of course_censored.cpp: lets the cut scores speak, and returns what they add to the evidence.
    double settleCut(double sigma);
    void fillRow(std::size_t record);
    void updateSite(double precisionStep, double shiftStep);
    double siteEvidence(double sigma);
    // A cut score as all but its own site foretell it, and how far from its end of the line.
    struct Rest {
        double variance = 0, centre = 0, side = 1, spread = 1, z = 0;
    };
    [[nodiscard]] Rest withoutSite(const Site& site, double sigma);

    [[nodiscard]] double amountMean(const Shape& shape, std::size_t amount) const;
    [[nodiscard]] bool isNegligible(double logWeight) const;
    [[nodiscard]] std::size_t tasterPlace(std::size_t record) const
    {
        return amounts_ + static_cast<std::size_t>(data_.scores[record].taster);
    }
    [[nodiscard]] std::size_t sessionPlace(std::size_t record) const
    {
        return sessions_[sessionOf_[record]].place;
    }
    [[nodiscard]] double siteVariance(std::size_t record, double sigma) const;

    const CourseModel& model_;
    const CourseData& data_;
    Course& course_;
    std::size_t amounts_, tasters_, apart_ = 0, all_ = 0;  // dimensions
    std::vector<GridPoint> noises_;
    std::vector<Session> sessions_;
    std::vector<std::size_t> sessionOf_;
    std::vector<double> weight_;  // 1/q^2 of each score; 0 if it is cut
    std::vector<double> rows_, rest_;
    std::vector<double> priorPrecision_;  // of the tasters
    double tasterLogDeterminant_ = 0;
    std::vector<double> fixed_;         // X'N^-1X times sigma^2, of what no shape changes
    std::vector<double> cross_, pull_;  // X'N^-1X and X'N^-1r times sigma^2
    double restSquares_ = 0;
    double logNoise_ = 0;    // the logarithm of |N| at sigma 1
    std::size_t plain_ = 0;  // scores that are not cut
    std::vector<Site> sites_, firstSites_;
    // The posterior of the part that is being fitted, and scratch.
    std::vector<double> factor_, covariance_, mean_, startCovariance_, startMean_, row_, image_,
        lean_;
    std::vector<double> logWeights_;
    std::vector<Suspect> suspectOf_;
    double highest_ = 0;
};

}  // namespace spile::outlook
