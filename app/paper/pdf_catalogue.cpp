// SPDX-License-Identifier: Apache-2.0
#include "paper/pdf_catalogue.h"

#include <QRegularExpression>
#include <QString>

namespace baywright {

QByteArray withoutPrintScaling(const QByteArray& pdf) {
  const QString trailer = QString::fromLatin1(pdf.mid(pdf.lastIndexOf("trailer")));
  const auto root = QRegularExpression(QStringLiteral(R"(/Root (\d+) 0 R)")).match(trailer);
  const auto size = QRegularExpression(QStringLiteral(R"(/Size (\d+))")).match(trailer);
  const auto start = QRegularExpression(QStringLiteral(R"(startxref\s+(\d+))")).match(trailer);
  if (!root.hasMatch() || !size.hasMatch() || !start.hasMatch()) return pdf;

  const QByteArray head = "\n" + root.captured(1).toLatin1() + " 0 obj\n";
  const qsizetype object = pdf.lastIndexOf(head);
  if (object < 0) return pdf;
  const qsizetype body = object + head.size();
  const qsizetype end = pdf.indexOf("endobj", body);
  const qsizetype close = pdf.lastIndexOf(">>", end);
  if (end < 0 || close < body) return pdf;

  QByteArray result = pdf;
  if (!result.endsWith('\n')) result += '\n';
  const qsizetype offset = result.size();
  result += root.captured(1).toLatin1() + " 0 obj\n" + pdf.mid(body, close - body) +
            "/ViewerPreferences << /PrintScaling /None >>\n>>\nendobj\n";
  const qsizetype table = result.size();
  result += "xref\n" + root.captured(1).toLatin1() + " 1\n" +
            QByteArray::number(static_cast<qlonglong>(offset)).rightJustified(10, '0') + " 00000 n \n";
  result += "trailer\n<< /Size " + size.captured(1).toLatin1() + " /Root " + root.captured(1).toLatin1() +
            " 0 R /Prev " + start.captured(1).toLatin1() + " >>\nstartxref\n" +
            QByteArray::number(static_cast<qlonglong>(table)) + "\n%%EOF\n";
  return result;
}

}  // namespace baywright
