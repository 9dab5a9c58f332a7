// The core's precompiled headers and those of Qt without a window: for the store, the words and the
// command line.
#pragma once

#include "core/precompiled.h"

#include <QByteArray>
#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QList>
#include <QLocale>
#include <QString>
#include <QStringList>
#include <QVariant>
